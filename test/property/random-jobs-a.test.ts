import { runRandomJobs } from './random-jobs.ts';

// half of the 10 000 jobs; two files, so that two cores share them
runRandomJobs([0, 1, 2, 3, 4]);
