/** The one file that knows the library behind the browser's database. */
export { createStore as openStore, promisifyRequest as settled, type UseStore as Store } from 'idb-keyval';
