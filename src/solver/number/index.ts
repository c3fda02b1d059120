/** Our own elementary functions: only + − × ÷ √, so every machine gives the same bits. */
export { acos } from './acos.ts';
export { atan2 } from './atan2.ts';
export { cbrt } from './cbrt.ts';
export { cos } from './cos.ts';
export { degToRad, radToDeg } from './degrees.ts';
export { sin } from './sin.ts';
