/**
 * A browser on a machine at other work now and then answers after a test has given up. Such a test is tried again, and
 * what it said first is printed: one that fails each time fails.
 */
jest.retryTimes(2, { logErrorsBeforeRetry: true });
