"""How loosely one may write: what a coach may say and how it is written back. A test reads every pair.

The practice they stand in has a square, its sides amber and blue, inside and edge players, and a neutral.
"""

LOOSELY: tuple[tuple[str, str], ...] = (
    ("The floater's two-touch.", "Neutrals have 2 touches."),
    ("Outside players only get one touch each.", "Edge players have 1 touch."),
    ("You get a point every time you string eight passes together.", "A side scores 1 for completing 8 passes in a "
     "row."),
    ("Six passes without losing it is worth two.", "A side scores 2 for completing 6 passes in a row."),
    ("Headers count double.", "A score with the head counts 2."),
    ("You need five passes before you can score.", "A score counts only after a side completes 5 passes."),
    ("Passes between helpers don't count.", "Passes between edge players do not count."),
    ("Helpers aren't allowed in the square.", "Edge players stay out of the square."),
    ("You're not allowed to tackle the helpers.", "Nobody tackles edge players."),
    ("Once you win it you've got eight seconds to shoot.", "A side must shoot within 8 seconds of winning the ball."),
    ("Jokers can't score.", "Neutrals may not score."),
    ("The floater's always with whoever's got the ball.", "Neutrals play for the side with the ball."),
    ("Give it away and the other team starts.", "When a side loses the ball, the other side starts."),
    ("Follow your pass.",
     "When a side passes to edge players, the passer changes places with the receiver."),
    ("If you win it and make a pass, your nearest helper comes in.",
     "When a side wins the ball and completes a pass, its nearest edge player comes in."),
    ("New neutral every three minutes.", "Every 3 minutes, the next group changes places with the neutrals."),
    ("Two minutes a go.", "A turn lasts 2 minutes."),
    ("First to three wins.", "A turn ends at 3 points."),
    ("Kick-ins, no throw-ins.", "The ball comes back in with a kick-in."),
    ("Keep it on the floor, lads.", "Passes stay on the ground."),
    ("Helpers have two touches and can't come into the square.",
     "Edge players have 2 touches. Edge players stay out of the square."),
)  # fmt: skip
NOT_READ: tuple[tuple[str, str], ...] = (
    ("Everyone except the helpers has two touches.", "“except” is no word of the language and is never dropped"),
    ("Six passes is a point unless a floater was used.", "nor is “unless”"),
    ("Helpers have at least two touches.", "a limit says at most"),
)
