// For the plain TypeScript check, which does not read .astro files; `astro check` sees the components themselves.
declare module '*.astro' {
  const component: (props: Record<string, unknown>) => unknown;
  export default component;
}
