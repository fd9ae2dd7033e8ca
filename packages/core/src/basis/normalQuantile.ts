/**
 * The standard normal deviate below which a share `p` of a population lies, for 0 < p < 1.
 *
 * Rational approximation of P. J. Acklam (2003); relative error below 1.2e-9.
 */
export function normalQuantile(p: number): number {
  if (p < 0.024_25) return tail(Math.sqrt(-2 * Math.log(p)));
  if (p > 0.975_75) return -tail(Math.sqrt(-2 * Math.log1p(-p)));
  const q = p - 0.5;
  const r = q * q;
  const above =
    ((((-39.696_830_286_653_76 * r + 220.946_098_424_520_5) * r - 275.928_510_446_968_7) * r +
      138.357_751_867_269) *
      r -
      30.664_798_066_147_16) *
      r +
    2.506_628_277_459_239;
  const below =
    ((((-54.476_098_798_224_06 * r + 161.585_836_858_040_9) * r - 155.698_979_859_886_6) * r +
      66.801_311_887_719_72) *
      r -
      13.280_681_552_885_72) *
      r +
    1;
  return (above * q) / below;
}

function tail(q: number): number {
  const above =
    ((((-0.007_784_894_002_430_293 * q - 0.322_396_458_041_136_5) * q - 2.400_758_277_161_838) * q -
      2.549_732_539_343_734) *
      q +
      4.374_664_141_464_968) *
      q +
    2.938_163_982_698_783;
  const below =
    (((0.007_784_695_709_041_462 * q + 0.322_467_129_070_039_8) * q + 2.445_134_137_142_996) * q +
      3.754_408_661_907_416) *
      q +
    1;
  return above / below;
}
