/** What an error in focus does to sight: wavefront, transfer of contrast, blurred pictures, acuity, test letters. */
export { expectedAcuity, type ExpectedAcuity } from './sight-acuity.js';
export { besselJ1, discTransform } from './sight-bessel.js';
export { Blurrer, blur, blurSteps } from './sight-image.js';
export { SIGHT_LIMITS } from './sight-limits.js';
export { GAP_DIRECTIONS, gapSize, landolt, type GapDirection, type LandoltRing, type Point } from './sight-optotype.js';
export type { Picture } from './sight-picture.js';
export { PICTURE_FRAMES, type BlurOptions, type PictureFrame } from './sight-render.js';
export { TRANSFER_MODELS, blurEllipse, cutOffFrequency, transfer, type BlurEllipse, type Transfer, type TransferModel, type TransferOptions } from './sight-transfer.js';
export { refractionOf, wavefront, zernikeIndex, type Wavefront } from './sight-wavefront.js';
