#!/usr/bin/env node
import { checkFeatures } from '../src/check-features.mjs';
import { reportProblems } from '../src/report-problems.mjs';

reportProblems('features', checkFeatures);
