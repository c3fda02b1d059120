/** A share from 0 to 1 in per cent, to a tenth: "66.7 %". */
export const percentText = (share: number): string => `${Math.round(share * 1000) / 10} %`;
