// Stands for unicode-properties: fontkit asks of every glyph whether it is a mark, which needs no table.

export {
  getCategory,
  getCombiningClass,
  getScript,
  isDigit,
} from '../../node_modules/unicode-properties/dist/module.mjs';

const MARK = /^\p{M}$/u;

export const isMark = (codePoint) => MARK.test(String.fromCodePoint(codePoint));
