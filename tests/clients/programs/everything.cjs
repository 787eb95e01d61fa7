// The same by require.
const entries = {
  index: require('protolysis'),
  acids: require('protolysis/acids'),
  reagents: require('protolysis/reagents'),
  indicators: require('protolysis/indicators'),
  colour: require('protolysis/colour'),
  exact: require('protolysis/exact'),
  measurement: require('protolysis/measurement'),
  plot: require('protolysis/plot'),
  handout: require('protolysis/handout'),
};
import('./answers.js').then(({ answersOf }) => console.log(JSON.stringify(answersOf(entries))));
