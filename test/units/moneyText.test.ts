import { describe, expect, it } from 'vitest';
import { currencyOf, readMoney } from '../../src/units/moneyText.ts';

describe('readMoney', () => {
  it.each([
    ['4.29', 4.29, ''],
    ['3,75', 3.75, ''],
    ['$4.29', 4.29, '$'],
    ['4.29 $', 4.29, '$'],
    ['$ 4', 4, '$'],
    ['3,75 USD', 3.75, 'USD'],
    ['usd 3.75', 3.75, 'USD'],
    ['$4.29 USD', 4.29, 'USD'],
    ['US$4.29', 4.29, 'USD'],
    ['C$ 12', 12, 'CAD'],
    ['€12', 12, 'EUR'],
    ['12,50 €', 12.5, 'EUR'],
    ['£9.99', 9.99, 'GBP'],
    ['Fr. 12', 12, 'CHF'],
    ['1,299', 1299, ''],
    ['1.299,50 €', 1299.5, 'EUR'],
    ['$1,299.50', 1299.5, '$'],
    ['free', 0, ''],
  ])('%s', (text, amount, currency) => {
    expect(readMoney(text)).toEqual({ ok: true, value: { amount, currency } });
  });

  it.each(['cheap', '', '-3', '3 for 2', '€4 USD', '4.29 a foot', '$', '4..2', '12 bananas', '2 AWG', '665 OFC'])(
    'refuses %j',
    (text) => {
      expect(readMoney(text)).toMatchObject({ ok: false, expected: expect.stringContaining('a price') });
    },
  );
});

it('a currency is written in one way', () => {
  expect(['usd', 'US$', '€', 'euro', '$', '', 'Kč'].map(currencyOf)).toEqual([
    'USD',
    'USD',
    'EUR',
    'EUR',
    '$',
    '',
    'Kč',
  ]);
});
