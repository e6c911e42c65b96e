/** What stands where a figure would, for a cable without one. */
export const NOT_MEASURED = (
  <span class="unknown">
    <span aria-hidden="true">–</span>
    <span class="hidden">not measured</span>
  </span>
);
