"""What can go wrong with an audit, said for people."""


class AuditFault(Exception):
    """The audit cannot be done as asked; the message says what is wrong, where, and what to do."""


class AuditStopped(Exception):
    """The person stopped the work; what was done is kept and the same command goes on from there."""
