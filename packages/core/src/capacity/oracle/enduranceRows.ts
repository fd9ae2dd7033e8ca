/**
 * Endurance times in seconds at 10, 20 … 90 % of maximal strength, from the parameters of
 * Frey-Law LA, Looft JM, Heitsman J. J Biomech 2012;45(10):1803-1808 (doi
 * 10.1016/j.jbiomech.2012.04.018), Table 1, with the closed form of Xia and Frey Law 2008; rounded
 * to 0.1 s. They lie within 1.5 % of an integration tabulated independently.
 */
export const enduranceRows = {
  shoulder: [1057.4, 274.3, 144.4, 88.7, 57.6, 37.8, 24.0, 13.9, 6.1],
  elbow: [2793.6, 565.4, 292.7, 178.7, 115.7, 75.7, 48.1, 27.8, 12.3],
  knee: [1506.3, 339.9, 177.0, 108.3, 70.2, 46.0, 29.2, 16.9, 7.4],
  ankle: [3747.8, 863.3, 450.1, 275.6, 178.7, 117.1, 74.3, 43.0, 19.0],
  trunk: [2992.9, 675.2, 351.6, 215.1, 139.5, 91.4, 58.0, 33.5, 14.8],
  grip: [1384.6, 473.1, 258.3, 161.1, 105.5, 69.6, 44.4, 25.7, 11.4],
  general: [2044.0, 516.9, 271.5, 166.7, 108.3, 71.0, 45.1, 26.1, 11.5],
} as const;
