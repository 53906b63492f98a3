// The browser's own report of tasks of 50 ms or more (W3C, Long Tasks API).

/** Watches how long a page is busy without a pause; what is returned tells the longest so far, in ms. */
export const watchTasks = async (page) => {
  await page.evaluate(async () => {
    if (!PerformanceObserver.supportedEntryTypes.includes('longtask')) throw new Error('no report');
    // What began before does not count.
    await new Promise((resolve) => setTimeout(resolve, 300));
    document.body.dataset.longest = '0';
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries())
        document.body.dataset.longest = String(Math.max(duration, Number(document.body.dataset.longest)));
    }).observe({ type: 'longtask' });
  });
  return async () => Number(await page.locator('body').getAttribute('data-longest'));
};
