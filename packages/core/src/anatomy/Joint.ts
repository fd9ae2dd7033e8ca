/** Joints that exercises load; the shoulder blade counts as one. */
export type JointId =
  | 'shoulder'
  | 'shoulder-blade'
  | 'elbow'
  | 'wrist'
  | 'spine'
  | 'hip'
  | 'knee'
  | 'ankle';

/** What a joint does against the load while it is lifted (or holds, for the trunk). */
export type JointAction =
  | 'shoulder-flexion'
  | 'shoulder-extension'
  | 'shoulder-abduction'
  | 'shoulder-adduction'
  | 'shoulder-horizontal-adduction'
  | 'shoulder-horizontal-abduction'
  | 'shoulder-external-rotation'
  | 'shoulder-internal-rotation'
  | 'shoulder-blade-retraction'
  | 'shoulder-blade-protraction'
  | 'shoulder-blade-elevation'
  | 'shoulder-blade-depression'
  | 'shoulder-blade-upward-rotation'
  | 'elbow-flexion'
  | 'elbow-extension'
  | 'wrist-flexion'
  | 'wrist-extension'
  | 'finger-flexion'
  | 'spine-flexion'
  | 'spine-extension'
  | 'spine-rotation'
  | 'spine-side-flexion'
  | 'hip-extension'
  | 'hip-flexion'
  | 'hip-abduction'
  | 'hip-adduction'
  | 'knee-extension'
  | 'knee-flexion'
  | 'ankle-plantarflexion'
  | 'ankle-dorsiflexion';

/** A position that an exercise takes a joint through under load, named so that limits can refer to it. */
export type PositionId =
  | 'shoulder-behind-trunk'
  | 'shoulder-flared-press'
  | 'shoulder-high-five'
  | 'shoulder-raised-turned-in'
  | 'shoulder-overhead'
  | 'shoulder-hanging'
  | 'elbow-deep-bend'
  | 'elbow-palms-down-pull'
  | 'elbow-hard-grip'
  | 'wrist-bent-back'
  | 'spine-upright-load'
  | 'spine-seated-load'
  | 'spine-unsupported-hinge'
  | 'spine-loaded-bend'
  | 'spine-loaded-twist'
  | 'hip-deep-bend'
  | 'hip-wide-split'
  | 'knee-bent-past-60'
  | 'knee-straightened-against-load'
  | 'knee-kneeling'
  | 'ankle-deep-bend';

/** What a loaded position is, in words. */
export interface LoadedPosition {
  readonly id: PositionId;
  readonly joint: JointId;
  /** A phrase that fits after "it has": "the upper arm behind the trunk under load". */
  readonly what: string;
}
