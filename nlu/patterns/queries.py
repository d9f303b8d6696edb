"""What a nurse asks for, by topic, and over which window; phrases as in `cues`."""

from __future__ import annotations

QUERIES: dict[str, tuple[str, ...]] = {
    "ask:last": (
        "(last|latest|previous|most recent|current|recent) (mark|line|reading|level|entry|number|marking|marks)", "latest", "last one",
        "where (is|was|are we with|are we on|are we at with)", "what's it at", "what is it at", "what was it at", "last value",
        "what's the (mark|line|level|reading)", "what is the (mark|line|level|reading)", "what was the (mark|line|level|reading)",
        "what was the last (mark|line|level|reading|one|entry)", "what is the last (mark|line|level|reading|one|entry)",
        "what's the last (mark|line|level|reading|one|entry)", "where's", "last",
        "when was the last (mark|line|reading)", "when was it last marked", "when was it last read", "last marked", "last charted mark",
        "what did we have last", "what do we have", "what do you have", "what have you got", "status", "last known", "where did we leave off",
        "where are we", "update on", "show me the last (mark|line|reading)", "who marked", "last recorded",
    ),
    "ask:chart": (
        "what do i chart", "what to chart", "what should i chart", "volume to chart", "volumes to chart", "hourly volumes", "volumes", "what needs charting",
        "what do i need to chart", "what goes in the chart", "chart volumes", "chart", "charting", "to chart", "hourly outputs", "hourlies", "what have i got to chart",
        "what needs to be charted", "hour by hour", "hourly totals", "what do we chart", "what can i chart", "i&o", "intake and output", "charted", "what do i put in the chart",
        "what do i write", "hourly breakdown", "what's to chart", "what is to chart", "numbers to chart", "hourly numbers", "what should we chart", "volumes for chart",
        "amount to chart", "amounts to chart", "what was charted", "what did i chart", "what do i document", "what should i document", "hourly output list",
        "what volume do i chart", "what is there to chart", "charting for", "chart for",
    ),
    "ask:total": (
        "total", "totals", "how much has", "how much did", "how much", "total output", "sum", "how much out", "how many ml", "total drainage", "grand total", "total so far",
        "how much total", "output total", "shift total", "24h total", "total for", "what's the total", "what is the total", "running total", "total volume", "how much drained",
        "how much drainage", "how much output", "what's the output", "what is the output", "24 hour total", "what was the output", "cumulative", "total drained",
        "what has drained", "how many mls", "how many cc", "what did it drain", "what's drained", "drain total", "sum total", "drainage total", "cumulative total",
        "overall total", "cumulative output", "what was the total", "total amount", "what came out", "what has come out",
    ),
    "ask:rate": (
        "rate", "how fast", "ml per hour", "hourly rate", "ml/h", "ml/hr", "drain rate", "what's the rate", "what is the rate", "per hour", "drainage rate", "ml an hour",
        "output rate", "mls per hour", "mls an hour", "ml / h", "ml / hr", "current rate", "average rate", "how quickly", "cc per hour", "cc/hr", "cc / hr", "rate of drainage",
        "ml per hr",
    ),
    "ask:trend": (
        "trend", "trending", "trends", "is it slowing", "slowing down", "going up or down", "is it increasing", "increasing or decreasing", "getting better", "up or down", "is it going down",
        "is it going up", "trending up", "trending down", "slowing", "is it slowing down", "picking up", "graph", "speeding up", "getting worse", "tapering", "is it decreasing", "trend for",
        "trendline", "how is it trending", "how's it trending", "tapering off",
    ),
    "ask:due": (
        "due", "overdue", "what's due", "what is due", "who is due", "who's due", "who needs marks", "when is the next mark", "next mark", "what needs a mark", "what's overdue", "anything due",
        "which are due", "which beds are due", "who needs a mark", "needs marking", "what marks are due", "next due", "what do i need to mark", "when is the next mark due", "next mark due", "who is overdue",
        "who's overdue", "what's late", "anything overdue", "when's the next mark", "which beds need marks", "which beds need a mark", "marks due", "due now", "is due", "what needs marking", "which beds are overdue",
        "what's next", "late marks", "what's due next", "when is the next line due", "what do i still need to mark", "beds due", "beds overdue", "due list", "anyone due", "anyone overdue",
    ),
    "ask:handoff": (
        "handoff", "hand off", "sbar", "report", "handover", "hand over", "shift report", "give me report", "report on", "hand-off", "handoff report", "bedside report", "handing off", "report for", "giving report",
        "sbar report", "hand-over", "end of shift report", "summary", "summarize", "summarise", "report sheet", "handoff for", "sbar for", "give report", "shift summary", "shift handoff", "sign out", "signout",
    ),
    "ask:capacity": (
        "capacity", "how full", "when will (it|) be full", "when (is|) (it|) full", "when full", "room left", "space left", "how much room", "how much space", "when will it fill", "full yet", "when do i change the canister", "how much is left", "when does it fill up", "room in the canister",
        "when will the canister be full", "when to change", "when do i need to change", "almost full", "how full is", "when is it full", "when do we change", "how long until full", "when will it need changing", "when should i change the canister",
        "when will the box be full", "how much room is left", "how much space is left", "does it need changing", "does the canister need changing", "how full is the canister", "how full is the box", "time to full",
        "when do we need to change the canister", "how long till full", "how long until it's full", "how long before it's full", "space remaining", "room remaining", "capacity left", "when is the canister full", "near full", "is it full", "nearly full",
        "how much room is left in the canister", "how much room left", "how much space left", "when does the canister need changing", "when does it need changing", "when do i need to change the canister",
    ),
    "ask:beds": (
        "which beds", "list beds", "what beds", "who has chest tubes", "census", "who has a chest tube", "all beds", "list of beds", "list the beds", "show beds", "which patients have chest tubes", "who has tubes", "beds list", "show me the beds", "what beds do we have",
        "which beds have chest tubes", "which beds have drains", "who has drains", "all patients", "unit overview", "overview", "all drains", "list drains", "which beds have tubes", "show all beds", "unit list", "what beds are on", "what beds have chest tubes",
        "how many chest tubes", "how many drains", "which rooms have chest tubes", "who's got a chest tube", "my beds", "list all beds", "what beds have drains", "board", "beds on the unit", "show me all beds", "what drains do we have", "list of drains", "who has a drain",
        "what beds are active", "active beds", "which beds have a chest tube", "who all has chest tubes",
    ),
    "ask:checks": (
        "checks", "last check", "last checks", "check status", "what's the suction", "what is the suction", "what was the suction", "when was it last checked", "system check", "system checks", "latest check", "latest checks", "what's the seal", "any air leak", "is there a leak",
        "is there an air leak", "any leak", "is it tidaling", "what was the seal", "last air leak", "what's the air leak", "what is the air leak", "air leak status", "last checked", "what suction", "checks on", "show checks", "check results", "what suction is", "checks for",
        "drain checks", "what was the last check", "what is the seal", "when was the last check", "does it have a leak", "does it have an air leak", "when was the last air leak check", "check history", "was there a leak", "was there an air leak", "most recent check",
        "most recent checks", "show me the checks", "what were the checks", "leak status", "suction setting", "what color is", "what color was", "what colour is", "what colour was",
    ),
    "ask:history": (
        "history", "all marks", "list marks", "entries", "log", "all entries", "show marks", "list of marks", "all the marks", "all lines", "show me all the marks", "marks today", "all readings", "list all marks", "show all marks", "ledger", "previous marks", "list entries",
        "show history", "show me the marks", "list the marks", "every mark", "show the log", "show entries", "list readings", "all levels", "past marks", "what marks", "marks for", "show me all marks", "mark history", "show all entries", "show log", "past readings", "list lines", "marks so far",
        "timeline", "what are the marks", "what were the marks", "list all the marks", "prior marks", "earlier marks", "all the entries",
    ),
    "ask:open": (
        "open questions", "what's open", "what is open", "unanswered", "pending", "outstanding", "open question", "any questions", "unconfirmed", "what is pending", "what's pending", "still open", "anything open", "anything pending", "anything outstanding", "what's unconfirmed",
        "what's outstanding", "what is outstanding", "what's not confirmed", "questions open", "open items", "anything unconfirmed", "what have i not answered", "what do you need from me", "what's unanswered", "unanswered questions", "what's still open", "open", "pending questions",
        "unresolved", "any open questions", "questions", "waiting on", "list open questions", "show open questions",
    ),
    "ask:me": ("who am i", "whoami", "my role", "what's my role", "what is my role", "who do you think i am", "what am i allowed", "who am i logged in as", "what can i see", "me", "my name", "my access", "am i charge", "who are you talking to", "what is my access", "what unit am i on", "which unit am i on", "my id", "my user", "what's my name"),
    "ask:repeat": ("repeat", "say again", "come again", "say that again", "what did you say", "pardon", "again", "repeat that", "repeat please", "say it again", "can you repeat that", "could you repeat that", "repeat last", "repeat the last", "resend", "what was that", "one more time", "send again", "send that again", "read that back", "read it back", "can you repeat", "didn't catch that", "sorry what", "didn't get that", "read back", "once more"),
    "window:shift": ("this shift", "my shift", "the shift", "so far this shift", "on my shift", "shift", "current shift", "for shift", "for the shift", "for my shift", "over the shift", "for this shift", "since start of shift", "since the start of my shift", "since shift start", "this shift so far", "since start of my shift", "since the start of the shift", "since i came on", "since i started", "during my shift", "on this shift", "since beginning of shift", "in this shift"),
    "window:last_shift": ("last shift", "previous shift", "prior shift", "the last shift", "the shift before", "the previous shift", "shift before", "prev shift", "for last shift", "for the last shift", "on last shift", "during last shift", "past shift", "over last shift", "previous shift's", "last shift's", "on the last shift", "the prior shift", "for the previous shift", "yesterday's shift"),
    "window:day": ("today", "day", "the day", "so far today", "for today", "the day so far", "today so far", "daily", "since the day started", "this day", "for the day", "today's"),
    "window:last_day": ("yesterday", "last day", "previous day", "the day before", "yesterday's", "for yesterday", "the previous day", "the last day", "prior day"),
    "window:24h": ("last day and night", "past day", "round the clock", "the past day", "24 hourly"),
    "window:placement": ("since placement", "since insertion", "overall", "in all", "since it was placed", "since it went in", "since placed", "altogether", "all time", "since the tube went in", "ever", "since inserted", "to date", "since it was put in", "all together", "so far in total", "since the beginning", "since the start", "since surgery", "since op", "since the tube was placed", "from placement", "total since placement", "since tube placement", "since the drain was placed", "since chest tube placement", "since the chest tube was placed", "since day one"),
    "question": ("what", "what's", "whats", "how", "when", "who", "which", "show", "show me", "give me", "list", "any", "can you tell me", "tell me", "is there", "do we have", "did", "does", "can i get", "where", "hows", "how's", "why", "has", "could i get", "i need", "get me", "what are", "what is", "what was", "can i have", "is bed", "is it", "do i", "should i", "can you", "could you", "would you", "check on", "look up", "pull up", "who's", "when's"),
    "since": ("since", "from", "between", "after", "starting"),
}
