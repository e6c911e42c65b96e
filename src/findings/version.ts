/** Version of the computation. It changes whenever a digit of any finding may change, and the changelog says which. */
export const ENGINE_VERSION = '0.1.0';
