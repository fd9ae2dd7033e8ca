import { words } from '../words.ts';
import { plateSize } from './plateSize.ts';

/** One plate on the sleeve, as it is drawn. */
export interface DrawnPlate {
  /** What stands on it: `20`, `45 lb`. */
  readonly label: string;
  readonly kg: number;
  readonly diameterMm?: number;
  readonly thicknessMm?: number;
  /** Goes on in this step. */
  readonly isNew?: boolean;
}

interface BarDrawingProps {
  /** One side, innermost first; the other side is the same. */
  readonly plates: readonly DrawnPlate[];
  readonly barLabel: string;
  /** The whole drawing in one sentence. */
  readonly says: string;
}

const WIDTH = 360;
const HEIGHT = 216;
const MIDDLE = HEIGHT / 2;
const FLANGE = 74;
/** Drawing units a millimetre, across and along the bar: along it everything is drawn wider. */
const ACROSS = 0.42;
const ALONG = 0.68;
/** From this thickness on the weight stands on the plate itself. */
const WIDE_ENOUGH = 13;
/** Length of the sleeve that plates and collar can take in the drawing. */
const ROOM = 214;

interface PlacedPlate {
  readonly left: number;
  readonly thick: number;
  readonly high: number;
  readonly plate: DrawnPlate;
}

/** One sleeve of a bar from the side: plates in loading order, in their true proportions. */
export function BarDrawing({ plates, barLabel, says }: BarDrawingProps) {
  const sizes = plates.map(drawnSize);
  const needed = sizes.reduce((sum, { thick }) => sum + thick + 1, 0);
  const squeeze = Math.min(1, ROOM / Math.max(needed, 1));
  let x = FLANGE + 10;
  const placed = sizes.map(({ thick, high, plate }): PlacedPlate => {
    const left = x;
    x += (thick + 1) * squeeze;
    return { left, thick: thick * squeeze, high, plate };
  });
  return (
    <svg class="wl-bar" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={says}>
      <rect class="wl-steel" x="0" y={MIDDLE - 5} width={FLANGE} height="10" />
      <path class="wl-knurl" d={`M6 ${MIDDLE}H${FLANGE - 8}`} />
      <rect class="wl-steel" x={FLANGE} y={MIDDLE - 15} width="9" height="30" rx="2" />
      <rect
        class="wl-steel"
        x={FLANGE + 9}
        y={MIDDLE - 9}
        width={WIDTH - FLANGE - 13}
        height="18"
        rx="3"
      />
      <text class="wl-bar-label" x="2" y={MIDDLE - 14}>
        {barLabel}
      </text>
      {placed.map((one) => (
        <g key={one.left} class="wl-plate" data-new={one.plate.isNew ? 'true' : undefined}>
          <rect
            x={one.left}
            y={MIDDLE - one.high / 2}
            width={one.thick}
            height={one.high}
            rx="2.5"
          />
          {one.thick >= WIDE_ENOUGH && <OnPlate {...one} />}
        </g>
      ))}
      {plates.length > 0 && (
        <path class="wl-collar" d={`M${x + 2} ${MIDDLE - 15}h7v30h-7zM${x + 9} ${MIDDLE - 4}h8`} />
      )}
      <BesidePlates placed={placed} x={x + 20} />
      <text class="wl-bar-side" x={WIDTH - 2} y={HEIGHT - 6} text-anchor="end">
        {words.bar.otherSide}
      </text>
    </svg>
  );
}

/** The weight of a plate that has room for it, written along the plate. */
function OnPlate({ left, thick, plate }: PlacedPlate) {
  const centre = left + thick / 2;
  return (
    <text
      x={centre}
      y={MIDDLE}
      transform={`rotate(-90 ${centre} ${MIDDLE})`}
      dy="0.35em"
      text-anchor="middle"
    >
      {labelOf(plate)}
    </text>
  );
}

/** The weights of thin plates, beyond the collar, each led to its plate; the outermost lowest. */
function BesidePlates({
  placed,
  x,
}: {
  readonly placed: readonly PlacedPlate[];
  readonly x: number;
}) {
  let lowest = MIDDLE - 26;
  return (
    <>
      {placed
        .filter(({ thick }) => thick < WIDE_ENOUGH)
        .toReversed()
        .map((one) => {
          const top = MIDDLE - one.high / 2;
          const y = Math.min(top - 8, lowest);
          lowest = y - 15;
          const centre = one.left + one.thick / 2;
          return (
            <g key={one.left}>
              <path class="wl-lead" d={`M${centre} ${top}V${y}H${x}`} />
              <text x={x + 4} y={y} dy="0.35em">
                {labelOf(one.plate)}
              </text>
            </g>
          );
        })}
    </>
  );
}

function labelOf({ label, isNew }: DrawnPlate): string {
  return isNew ? `+ ${label}` : label;
}

function drawnSize(plate: DrawnPlate) {
  const usual = plateSize(plate.kg);
  return {
    plate,
    high: Math.min(450, plate.diameterMm ?? usual.diameterMm) * ACROSS,
    thick: (plate.thicknessMm ?? usual.thicknessMm) * ALONG,
  };
}
