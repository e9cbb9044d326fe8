"""The unit on a page: turned, opened and taken apart in a browser, live or in one file to send."""
