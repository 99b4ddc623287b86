"""The field cards of the demo course as they go to the printer, looked at with tools from outside."""
