export * from './fastener-spec';
export * from './shear-joint';
export * from './problem';
export * from './shear-torque';
export * from './compare-fasteners';
export * from './fit-in-hole';
export * from './tell-by-marks';
