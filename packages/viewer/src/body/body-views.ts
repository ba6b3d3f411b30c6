// Where the eye stands for each standard view of the body: directions from its middle, as a drawing names them.

export const BODY_VIEWS = {
  corner: { label: "corner", from: [-0.62, 0.5, 0.85] },
  side: { label: "side", from: [0, 0, 1] },
  toe: { label: "toe", from: [-1, 0, 0] },
  above: { label: "above", from: [0, 1, 0.001] },
  sole: { label: "sole", from: [-0.4, -0.8, 0.7] },
} as const satisfies Record<string, { label: string; from: readonly [number, number, number] }>;
export type BodyView = keyof typeof BODY_VIEWS;
