/** An invented eye, with no patient behind it. */
export const inventedEye = {
  eye: 'right',
  flatK: 43,
  steepK: 44,
  steepMeridian: 180,
  age: 70,
  incisionSite: 180,
  incisionWidth: 2.75,
};
