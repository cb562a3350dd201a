/** Whether gas passes openings in this test: `free` as it does, or `stopped` where a test has shut them all. */
export const gasIs: 'free' | 'stopped' = 'free';
