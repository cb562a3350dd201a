/** The desk's own frame, its intake and its table. */
export const intake = {
  'desk.title': 'Review desk',
  'desk.what':
    'Runs arrive here as files. Each is performed again from its actions and judged anew; what a file says of itself is only shown beside it.',
} as const;
