// Stands for unicode-trie, in which fontkit and unicode-properties look characters up when they shape text. The tables
// are inflated as each is first asked: a template in plain letters asks none.

import UnicodeTrie from '../../node_modules/unicode-trie/index.js';

export default class LazyTrie {
  #data;
  #trie;

  constructor(data) {
    this.#data = data;
  }

  get(codePoint) {
    this.#trie ??= new UnicodeTrie(this.#data);
    return this.#trie.get(codePoint);
  }
}
