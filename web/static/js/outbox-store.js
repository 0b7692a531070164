// The outbox in the browser's own database. Every order is in it before it is sent, and leaves it
// only when the server has answered for it.
const NAME = 'sopwell-outbox';
const STORES = { orders: { keyPath: 'id', autoIncrement: true }, told: { keyPath: 'id' },
  thrown: { keyPath: 'id' }, turns: { keyPath: 'id' } };

let opened = null;

function open() {
  opened ||= new Promise((resolve, reject) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => {
      for (const [store, options] of Object.entries(STORES)) {
        asked.result.createObjectStore(store, options);
      }
    };
    asked.onsuccess = () => {
      asked.result.onversionchange = () => asked.result.close();
      resolve(asked.result);
    };
    asked.onerror = () => reject(asked.error);
    asked.onblocked = () => reject(new Error('the outbox is blocked'));
  });
  opened.catch(() => {
    opened = null;
  });
  return opened;
}

// Runs one transaction to its durable end; work gets the stores and may keep requests going.
export async function change(stores, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const all = database.transaction(stores, 'readwrite', { durability: 'strict' });
    const result = {};
    all.oncomplete = () => resolve(result.value);
    all.onabort = () => reject(all.error);
    work(...stores.map((store) => all.objectStore(store)), (value) => {
      result.value = value;
    });
  });
}

function all(store) {
  return change([store], (entries, done) => {
    const asked = entries.getAll();
    asked.onsuccess = () => done(asked.result);
  });
}

// Everything that waits, in the order in which it was taken.
export function waiting() {
  return all('orders');
}

// What guests were told as "waiting n" and has its number now.
export function told() {
  return all('told');
}

// An entry that takes another's place takes over what its guest was told and what was paid for it.
function inItsPlace(entry, old) {
  return old ? { ...entry, label: old.label, paid: old.paid,
    requests: [...entry.requests, ...old.requests.slice(1)] } : entry;
}

export function add(entry, instead) {
  return change(['orders'], (orders, done) => {
    const before = orders.get(instead || 0);
    before.onsuccess = () => {
      const kept = inItsPlace(entry, before.result);
      orders.delete(instead || 0);
      const asked = orders.add(kept);
      asked.onsuccess = () => done({ ...kept, id: asked.result });
    };
  });
}

// Alters an entry that is still there; gives it back, or nothing when it is gone.
export function alter(id, how) {
  return change(['orders'], (orders, done) => {
    const asked = orders.get(id);
    asked.onsuccess = () => {
      if (asked.result) {
        const entry = how(asked.result);
        orders.put(entry);
        done(entry);
      }
    };
  });
}

// Gives an entry the next label that no guest of this screen has in mind.
export function label(id) {
  return change(['orders', 'told'], (orders, told, done) => {
    const waits = orders.getAll();
    const known = told.getAll();
    known.onsuccess = () => {
      const entry = waits.result.find((one) => one.id === id);
      if (entry && !entry.label) {
        const taken = [...waits.result, ...known.result].map((one) => one.label || 0);
        entry.label = Math.max(0, ...taken) + 1;
        orders.put(entry);
      }
      done(entry);
    };
  });
}

// Puts a further request behind those of an entry; when the server has its order already, the
// request waits by itself. Nothing, when nobody knows the order any more.
export function follow(id, request, more) {
  return change(['orders', 'told'], (orders, told, done) => {
    const asked = orders.get(id);
    const known = told.get(id);
    known.onsuccess = () => {
      const entry = asked.result || (known.result && {
        ...known.result, lines: [], takenAtMs: Date.now(), total: '', requests: [], label: 0,
        state: 'waiting',
      });
      if (entry) {
        const longer = { ...entry, ...more, requests: [...entry.requests, request] };
        orders.put(longer);
        done(longer);
      }
    };
  });
}

// The server has it: it leaves the outbox, and what its guest was told is kept until it is known.
// A request that came in meanwhile keeps it here.
export function settle(entry) {
  return change(['orders', 'told'], (orders, told) => {
    const asked = orders.get(entry.id);
    asked.onsuccess = () => {
      const kept = asked.result;
      if (!kept || kept.requests.length > 0) {
        return;
      }
      if (kept.label) {
        told.put({ id: kept.id, label: kept.label, name: kept.name, number: kept.number,
          order: kept.order });
      }
      orders.delete(kept.id);
    };
  });
}

export function forgetTold(id) {
  return change(['told'], (told) => told.delete(id));
}

// The call stands in the line again, as it was typed, so the outbox need not hold it.
export function remove(id) {
  return change(['orders'], (orders) => orders.delete(id));
}

// Thrown away on purpose: it and its reason stay in this browser's database, and on no screen.
export function throwAway(entry, reason) {
  return change(['orders', 'thrown'], (orders, thrown) => {
    thrown.put({ ...entry, reason, thrownAtMs: Date.now() });
    orders.delete(entry.id);
  });
}
