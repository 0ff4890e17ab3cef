"""What can go wrong with a casebook, said for people: what happened, where, and what to do."""

from datetime import datetime

from notereader.casebook.edits import Edit
from notereader.record import Address, Record


class CasebookFault(Exception):
    """The casebook cannot be used as asked; the message says what happened and what to do."""


class DamagedCasebook(CasebookFault):
    """The casebook's file, or what it holds of a case, is damaged; it is mended at the next start."""


class NotAllConfirmed(CasebookFault):
    """A case cannot be confirmed while facts are still only proposed; `open_facts` names them."""

    def __init__(self, open_facts: list[Address]) -> None:
        self.open_facts = open_facts
        named = "; ".join(place.words() for place in open_facts[:5])
        more = f" and {len(open_facts) - 5} more" if len(open_facts) > 5 else ""
        super().__init__(f"Not yet confirmed or withdrawn: {named}{more}. Decide on these, then confirm the case.")


class ChangedElsewhere(Exception):
    """Another window or process changed the same fact, or the case that was to be confirmed, in the meantime.

    Nothing was saved. `record` and `revision` are what now stands in the casebook, `who` and `when` tell of the change,
    and `edit` is the edit that was held back (None where a confirmation was). To insist, call refresh() and apply an
    edit whose `before` is what the fresh record holds.
    """

    def __init__(self, *, edit: Edit | None, record: Record, revision: int, who: str, when: datetime) -> None:
        self.edit = edit
        self.record = record
        self.revision = revision
        self.who = who
        self.when = when
        what = edit.address.words() if edit else "This case"
        by = f" by {who}" if who else ""
        super().__init__(f"{what} was changed in another window{by}. Look at both before you decide.")
