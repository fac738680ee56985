using InspectLog.App.Media;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Bench.Photos;

/// <summary>What whoever took a photo should know at once, while it can be taken again. Nothing of it is refused. Pure.</summary>
public static class PhotoRemarks
{
    /// <summary>Each remark in a sentence or two; none for a good photo, or where nothing was made of it yet.</summary>
    /// <param name="slip">What was made of it.</param>
    /// <param name="canRetake">Whether it can still be taken again.</param>
    public static IReadOnlyList<string> Of(PhotoSlip? slip, bool canRetake) =>
    [
        .. new[] { slip?.Fault?.Remark(), slip?.Figures?.Sharpness?.Cause?.Remark(), slip?.Figures?.Light?.Remark() }
            .OfType<(string Said, string Again)>()
            .Select(remark => canRetake ? $"{remark.Said} {remark.Again}" : remark.Said),
    ];

    /// <summary>Why such a photo is taken back, in one press.</summary>
    /// <param name="slip">What was made of it.</param>
    public static string Reason(PhotoSlip? slip) =>
        slip?.Fault is not null ? "cannot be shown"
        : slip?.Figures?.Sharpness?.Cause is not null ? PhotoWords.NotSharp
        : slip?.Figures?.Light switch
        {
            LightFault.Dark => "too dark",
            LightFault.Bright => "too bright",
            _ => PhotoWords.NotSharp,
        };

    private static (string Said, string Again)? Remark(this PhotoFault fault) =>
        ($"Kept, but cannot be shown: {fault.Words()}.", "Take it again.");

    private static (string Said, string Again)? Remark(this BlurCause cause) => cause == BlurCause.Motion
        ? ("Blurred: it moved while the photo was taken.", "Take it again?")
        : ("Blurred: nothing in it is in focus.", "Take it again?");

    private static (string Said, string Again)? Remark(this LightFault light) => light == LightFault.Dark
        ? ("Too dark: its middle is nearly black.", "Take it again with more light?")
        : ("Too bright: much of its middle is plain white.", "Take it again with less light?");
}
