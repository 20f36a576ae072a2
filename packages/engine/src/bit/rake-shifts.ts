import type { ProfileZone } from "./profile-zone.ts";
import type { RakeSchedule, Rakes } from "./rake-schedule.ts";

/** Back rake added to what the schedule gives, zone by zone [rad]. */
export type RakeShifts = Readonly<Record<ProfileZone, number>>;

/** The schedule as it stands [rad]. */
export const NO_RAKE_SHIFTS: RakeShifts = { cone: 0, nose: 0, taper: 0, shoulder: 0, gauge: 0 };

/**
 * A schedule with the same back rake added everywhere.
 *
 * @source (d) sum of two angles
 */
export function shiftedRakes(
  schedule: RakeSchedule,
  /** Back rake added [rad]. */
  by: number,
): RakeSchedule {
  const shifted = (rakes: Rakes): Rakes => ({ ...rakes, backRake: rakes.backRake + by });
  if (schedule.kind === "even") {
    return { ...schedule, centre: shifted(schedule.centre), gauge: shifted(schedule.gauge) };
  }
  return {
    kind: schedule.kind,
    centre: shifted(schedule.centre),
    cone: shifted(schedule.cone),
    nose: shifted(schedule.nose),
    shoulder: shifted(schedule.shoulder),
    gauge: shifted(schedule.gauge),
  };
}
