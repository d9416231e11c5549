/** Where every camera starts from. */
export const cameraStart = { fov: 16, near: 1, far: 2000, position: [0, 150, -400] } as const
