using InspectLog.App.Forms;

namespace InspectLog.App.Bench.Photos;

/// <summary>Fields that forms about photos share.</summary>
internal static class PhotoForms
{
    /// <summary>Longest caption: it has to fit below a picture.</summary>
    private const int LongestCaption = 300;

    /// <summary>The caption; null where none was typed.</summary>
    public static string? Caption(PostedForm form)
    {
        var text = form.Text("caption");
        if (text.Length > LongestCaption)
        {
            form.Refuse("caption", $"Keep the caption to {LongestCaption} characters.");
        }

        return text.Length > 0 ? text : null;
    }

    /// <summary>The reason given: what was typed, or else the one that was pressed.</summary>
    public static string Reason(PostedForm form)
    {
        var reason = form.Text("other") is { Length: > 0 } typed ? typed : form.Text("reason");
        if (reason.Length == 0)
        {
            form.Refuse("other", "Press a reason, or say in a few words why it no longer counts.");
        }

        return reason;
    }
}
