import { describe, expect, it } from 'vitest';
import { fold, merge, type Payload, withdrawDetails } from '../../../src/core/job/index.ts';
import { Phone } from './support.ts';

type Field = Payload<'job.detail'>['field'];

function named(name: string): Phone {
  const phone = new Phone();
  phone.does('job.open', { name, system: 'metric', fraction: 32, demo: true });
  phone.does('job.detail', { field: 'customer', value: 'M. Sample' });
  phone.does('job.detail', { field: 'boat', value: 'Perla' });
  return phone;
}

function withdraw(phone: Phone, fields: Field[], name = 'Perla') {
  const { entries, reopen } = withdrawDetails(phone.entries, new Set(fields), name);
  if (reopen) phone.does('job.open', reopen);
  phone.does('erase', { entries, reason: 'asked' });
  return merge(phone.entries, []).entries;
}

describe('withdrawing details of a job', () => {
  it('leaves nothing of the customer, earlier spellings and taken-back ones too', () => {
    const phone = named('M. Sample – Perla');
    phone.does('job.detail', { field: 'contact', value: '555 0100' });
    const slip = phone.does('job.detail', { field: 'customer', value: 'N. Sampel' });
    phone.does('undo', { entry: slip.id });
    const entries = withdraw(phone, ['customer', 'contact']);
    expect(JSON.stringify(entries)).not.toMatch(/sample|sampel|0100/i);
    const sheet = fold(entries);
    expect(sheet.details).toMatchObject({ name: 'Perla', customer: '', contact: '', boat: 'Perla' });
    expect(sheet.disputes).toEqual([]);
  });

  it('keeps how the job measures: the name is opened anew with everything else as it was', () => {
    const sheet = fold(withdraw(named('M. Sample – Perla'), ['customer']));
    expect(sheet).toMatchObject({ system: 'metric', fraction: 32, demo: true });
    expect(sheet.carried.every(({ why }) => why === 'erased')).toBe(true);
  });

  it('leaves a name alone that says nothing of it, and opens nothing anew', () => {
    const phone = named('Blue boat');
    expect(withdrawDetails(phone.entries, new Set<Field>(['customer']), 'x').reopen).toBeNull();
    expect(fold(withdraw(phone, ['customer'])).details).toMatchObject({ name: 'Blue boat', customer: '' });
  });

  it('finds the customer in a name that was given later', () => {
    const phone = named('Blue boat');
    phone.does('job.detail', { field: 'name', value: 'Boat of m. sample' });
    const entries = withdraw(phone, ['customer']);
    expect(JSON.stringify(entries)).not.toMatch(/sample/i);
    expect(fold(entries).details.name).toBe('Blue boat');
  });

  it('wins over a phone that still knows them', () => {
    const phone = named('M. Sample – Perla');
    const other = phone.copy();
    other.does('job.detail', { field: 'place', value: 'berth 4' });
    const entries = withdraw(phone, ['customer']);
    for (const met of [merge(entries, other.entries), merge(other.entries, entries)]) {
      expect(JSON.stringify(met.entries)).not.toMatch(/sample/i);
      expect(fold(met.entries).details).toMatchObject({ customer: '', place: 'berth 4', name: 'Perla' });
      expect(met.setAside).toEqual([]);
    }
  });

  it('of what was never given names nothing', () => {
    expect(withdrawDetails(named('x').entries, new Set<Field>(['contact']), 'x')).toEqual({
      entries: [],
      reopen: null,
    });
  });
});
