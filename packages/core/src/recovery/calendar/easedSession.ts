import type { RotaSession } from '../Calendar.ts';

/** A session whose muscles are all ready so many hours sooner, not before at once. */
export function easedSession(session: RotaSession, hours: number): RotaSession {
  const ease = (muscles: Readonly<Record<string, number>>) =>
    Object.fromEntries(
      Object.entries(muscles).map(([muscle, needed]) => [muscle, Math.max(0, needed - hours)]),
    );
  return {
    ...session,
    muscles: ease(session.muscles),
    ...(session.light ? { light: { ...session.light, muscles: ease(session.light.muscles) } } : {}),
  };
}
