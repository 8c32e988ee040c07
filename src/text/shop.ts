import { shop } from './en/shop.ts';
import { inLanguage } from './rooms.ts';

/** The words of the shop's settings and of paper, apart from the rest so that the first load does not carry them. */
export function sayShop(): typeof shop {
  return inLanguage('shop', shop);
}
