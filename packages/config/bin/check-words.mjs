#!/usr/bin/env node
import { checkWords } from '../src/check-words.mjs';
import { reportProblems } from '../src/report-problems.mjs';

reportProblems('words', checkWords);
