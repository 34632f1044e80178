// The few functions of jstat that the tests compare with; the package has no types of its own.
declare module "jstat" {
  export const jStat: {
    readonly mean: (values: readonly number[]) => number;
    readonly spearmancoeff: (a: readonly number[], b: readonly number[]) => number;
    readonly rank: (values: readonly number[]) => number[];
    readonly studentt: {
      readonly cdf: (t: number, freedom: number) => number;
      readonly pdf: (t: number, freedom: number) => number;
      readonly inv: (share: number, freedom: number) => number;
    };
    readonly normal: { readonly pdf: (x: number, mean: number, sd: number) => number };
  };
}
