namespace InspectLog.App.Forms;

/// <summary>A form that cannot be read, by its sender's fault. Nothing of it was kept.</summary>
public sealed class UnreadableFormException(Exception problem) : Exception(
    "What was sent was not whole, or held more fields, longer texts or other signs than are taken here, so nothing of it was saved. Go back and send it again.",
    problem);
