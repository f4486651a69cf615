/** Ids of an invented plant, the same in every example. */
export const SET = '0d5c9a1e-51f0-4b6e-8f0c-6a0b6d2d1c11';
export const MOTOR_IN = '8a2b7f64-1c5d-4f77-9a53-4d7f0e9b2c12';
export const MOTOR_OUT = '3b9e2d70-7e1a-4c39-8d15-9c4a5f6e7d13';
export const AREA = 'c4f1e2a8-3d70-4a55-8b7e-1f2d3c4b5a16';
export const STORE = '6f1c1d9e-6f0b-4a53-9d0e-2f6f4f4a1f10';
export const SHELF = '7d2e8f41-9b3c-4c6a-a5d0-3e1f2a4b6c17';
export const SWAP = '91a7c3e5-2b4d-4f68-9c0a-5d6e7f8a9b18';
export const IMPORT = '5e2f9b3c-2a64-4d8b-b1f7-0c8e7d6a5b14';
export const CHANGE = 'b8d4f6a2-0c1e-4937-8a5b-7c9d0e1f2a19';

/** What whoever asks has made for one request. */
export const KEY = '2c9b6e14-7f3a-4d52-8e06-1a4b5c6d7e20';
