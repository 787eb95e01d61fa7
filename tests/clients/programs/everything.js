// Loads every entry, uses what rests on a package of its own, and prints what it finds as JSON.
import * as protolysis from 'protolysis';
import * as acids from 'protolysis/acids';
import * as colour from 'protolysis/colour';
import * as exact from 'protolysis/exact';
import * as handout from 'protolysis/handout';
import * as indicators from 'protolysis/indicators';
import * as measurement from 'protolysis/measurement';
import * as plot from 'protolysis/plot';
import * as reagents from 'protolysis/reagents';
import { answersOf } from './answers.js';

const entries = { index: protolysis, acids, reagents, indicators, colour, exact, measurement, plot, handout };
console.log(JSON.stringify(answersOf(entries)));
