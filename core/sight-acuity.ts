import { allowed } from './sight-limits.js';
import { SIGHT_MODEL } from './sight-model.js';

/** An acuity in the usual notations, and between which acuities about two of three eyes lie. */
export interface ExpectedAcuity {
  /** 0 is 6/6; larger is worse. */
  logMAR: number;
  /** 10^−logMAR. */
  decimal: number;
  /** `6/7.5`; the lower figure to two digits. */
  snellenMetres: string;
  /** `20/25`; the lower figure rounded. */
  snellenFeet: string;
  /** logMAR of the better end, one standard deviation from the curve. */
  low: number;
  /** logMAR of the worse end. */
  high: number;
  /** The cylinder is larger than any of the study: the figures are those of its largest, and the eye sees *less*. */
  beyondData: boolean;
}

/**
 * Distance acuity that an eye with this much astigmatism may expect while its sphere is corrected:
 * logMAR = 0.017·x² + 0.125·x − 0.116, x ≤ 3 D (Hoshikawa et al. 2021: healthy presbyopic eyes with and without their own
 * lens). The study found no difference between directions of the astigmatism, so none is asked for. The spread about
 * the curve is not on the pages that were read; it is worked out from R² with an assumption (`SIGHT_MODEL.acuitySd`).
 * @param cylinder amount of astigmatism, 0–15 D, without a sign.
 * @throws RangeError when it is out of range.
 */
export function expectedAcuity(cylinder: number): ExpectedAcuity {
  const { acuitySquare, acuityLinear, acuitySharp, acuityMost, acuitySd } = SIGHT_MODEL;
  const amount = allowed('astigmatism', 'cylinder', cylinder);
  const x = Math.min(amount, acuityMost);
  const logMAR = acuitySquare * x * x + acuityLinear * x + acuitySharp;
  const mar = 10 ** logMAR;
  return {
    logMAR,
    decimal: 1 / mar,
    snellenMetres: `6/${Number((6 * mar).toPrecision(2))}`,
    snellenFeet: `20/${Math.round(20 * mar)}`,
    low: logMAR - acuitySd,
    high: logMAR + acuitySd,
    beyondData: amount > acuityMost,
  };
}
