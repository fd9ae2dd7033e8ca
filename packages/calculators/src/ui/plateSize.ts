/** Weight in kg, diameter in mm: cast discs as they are common in the trade, a convention. */
const DIAMETERS: readonly (readonly [kg: number, mm: number])[] = [
  [0.25, 80],
  [0.5, 110],
  [1.25, 160],
  [2.5, 190],
  [5, 230],
  [10, 325],
  [15, 400],
  [20, 450],
  [50, 450],
];

/** Cast iron in g/cm³, and the part of a disc's cylinder that is metal and not dish or hole. */
const IRON = 7.2;
const FILLED = 0.72;

export interface PlateSize {
  readonly diameterMm: number;
  readonly thicknessMm: number;
}

/** How large a plate of this weight is drawn: a usual diameter, and the thickness that iron then needs. */
export function plateSize(kg: number): PlateSize {
  const diameterMm = diameterOf(kg);
  const faceCm2 = Math.PI * (diameterMm / 20) ** 2;
  const thicknessMm = ((kg * 1000) / IRON / faceCm2 / FILLED) * 10;
  return { diameterMm, thicknessMm: Math.min(80, Math.max(8, thicknessMm)) };
}

function diameterOf(kg: number): number {
  const above = DIAMETERS.findIndex(([weight]) => weight >= kg);
  if (above === 0) return DIAMETERS[0]?.[1] ?? 80;
  const [heavy, wide] = DIAMETERS[above] ?? [50, 450];
  const [light, narrow] = DIAMETERS[above - 1] ?? [heavy, wide];
  return heavy === light ? wide : narrow + ((kg - light) / (heavy - light)) * (wide - narrow);
}
