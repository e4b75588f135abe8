/** In place of Node's `buffer`, which ndarray-fft's pool of arrays asks whether what it takes back is one. */
export const Buffer = { isBuffer: () => false };
