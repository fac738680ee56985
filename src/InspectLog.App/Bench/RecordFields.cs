using InspectLog.App.Forms;
using InspectLog.Checks;

namespace InspectLog.App.Bench;

/// <summary>Reads what was seen or done at a check from a form. What the sheet does not have is noted on the form.</summary>
public static class RecordFields
{
    /// <summary>The field <c>condition</c>; null where the check has no such condition.</summary>
    public static string? Condition(PostedForm form, Check check)
    {
        var condition = form.Text("condition");
        if (check.Conditions.Any(known => known.Id == condition))
        {
            return condition;
        }

        form.Refuse("condition", "Choose what you saw from the list.");
        return null;
    }

    /// <summary>The field <c>action</c>; null where the check has no such action.</summary>
    public static string? Action(PostedForm form, Check check)
    {
        var action = form.Text("action");
        if (check.Actions.Contains(action))
        {
            return action;
        }

        form.Refuse("action", "Choose what was done from the list.");
        return null;
    }
}
