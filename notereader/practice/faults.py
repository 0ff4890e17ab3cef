"""What can go wrong in practice, said for people: what happened, where, and what to do."""

from notereader.casebook import CasebookFault


class PracticeFault(CasebookFault):
    """A case, a set or an attempt cannot be used as asked; the message says why and what to do.

    It is a CasebookFault so that a window that shows cases of a casebook shows attempts the same way.
    """
