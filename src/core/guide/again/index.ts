/** Pieces that are kept or printed to be measured again. Apart, so that the first load does not carry it. */
export { redeclare, templateOf } from './keep-template.ts';
export { type PaperStep, paperSteps } from './paper-steps.ts';
export { Template } from './template.ts';
