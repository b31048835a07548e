#!/usr/bin/env node
import { checkImports } from '../src/check-imports.mjs';
import { reportProblems } from '../src/report-problems.mjs';

reportProblems('imports', checkImports);
