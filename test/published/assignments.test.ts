import { describe, expect, test } from 'vitest';
import { standardRatings } from '@/lib/standards/standard-ratings';

const TWO = 'MG 1-14.42 rating table, read in two reproductions';
const ONE = 'MG 1-14.42 rating table, read in one reproduction';
const ENCLOSED = 'frame read in two reproductions of MG 1-14.42; that it is the enclosed motor’s is from memory';
const MEMORY = 'NEMA MG 1-2016 Part 13: from memory';

describe('NEMA T frames of enclosed motors', () => {
  test.each<[number, number, string, string]>([
    [1, 4, '143T', TWO],
    [1.5, 4, '145T', TWO],
    [2, 4, '145T', TWO],
    [3, 4, '182T', TWO],
    [5, 4, '184T', TWO],
    [7.5, 4, '213T', TWO],
    [10, 4, '215T', TWO],
    [15, 4, '254T', ONE],
    [20, 4, '256T', ONE],
    [25, 4, '284T', ONE],
    [30, 4, '286T', ONE],
    [40, 4, '324T', ONE],
    [50, 4, '326T', ONE],
    [100, 4, '405TS', MEMORY], // short shaft for direct connection; a belt takes the 405T
    [1, 6, '145T', TWO],
    [3, 6, '213T', TWO],
    [5, 6, '215T', TWO],
    [10, 6, '256T', ONE],
    [2, 8, '213T', TWO],
    [5, 8, '254T', TWO],
    [1.5, 2, '143T', TWO],
    [3, 2, '182T', ENCLOSED],
    [5, 2, '184T', ENCLOSED],
    [10, 2, '215T', ENCLOSED],
    [25, 2, '284TS', MEMORY],
  ])('%s hp, %s poles: %s (%s)', (hp, poles, frame, source) => {
    const rating = standardRatings('NEMA').find((one) => one.hp === hp && one.poles === poles);
    expect(rating?.frame).toBe(frame);
    const status = source === TWO ? 'published-2' : source === ONE ? 'published' : 'memory';
    expect(rating?.status).toBe(status);
  });
});

const EN = 'EN 50347 Table 7 (clause number from memory), read in two or more texts';
const EN_ONE = 'EN 50347 Table 7 (clause number from memory), read in one text';
const EN_MEMORY = 'EN 50347 Table 7: from memory';

describe('IEC frames of standard outputs', () => {
  test.each<[number, number, string, string]>([
    [0.75, 2, '80', EN],
    [1.5, 2, '90S', EN],
    [2.2, 2, '90L', EN],
    [4, 2, '112M', EN],
    [5.5, 2, '132S', EN],
    [7.5, 2, '132S', EN],
    [18.5, 2, '160L', EN],
    [45, 2, '225M', EN],
    [0.37, 4, '71', EN],
    [0.75, 4, '80', EN],
    [1.1, 4, '90S', EN],
    [1.5, 4, '90L', EN],
    [2.2, 4, '100L', EN],
    [3, 4, '100L', EN_ONE],
    [4, 4, '112M', EN],
    [5.5, 4, '132S', EN],
    [7.5, 4, '132M', EN],
    [11, 4, '160M', EN],
    [15, 4, '160L', EN],
    [22, 4, '180L', EN],
    [30, 4, '200L', EN],
    [37, 4, '225S', EN],
    [55, 4, '250M', EN],
    [90, 4, '280M', EN],
    [132, 4, '315M', EN],
    [0.12, 4, '63', EN_MEMORY],
    [2.2, 6, '112M', EN],
    [3, 6, '132S', EN],
    [5.5, 6, '132M', EN],
    [11, 6, '160L', EN],
    [30, 6, '225M', EN],
    [2.2, 8, '132S', EN],
    [4, 8, '160M', EN_ONE],
    [11, 8, '180L', EN],
  ])('%s kW, %s poles: %s (%s)', (kw, poles, frame, source) => {
    const rating = standardRatings('IEC').find((one) => one.kw === kw && one.poles === poles);
    expect(rating?.frame).toBe(frame);
    const status = source === EN ? 'published-2' : source === EN_ONE ? 'published' : 'memory';
    expect(rating?.status).toBe(status);
  });
});
