using InspectLog.Photos.Developing;

namespace InspectLog.App.Media;

/// <summary>Why a photo cannot be shown, in words. Pure.</summary>
public static class FaultWords
{
    /// <summary>The reason, to stand after a colon.</summary>
    public static string Words(this PhotoFault fault) => fault switch
    {
        PhotoFault.TooSlow => "making it ready takes too long",
        PhotoFault.TooMuchMemory => "making it ready takes too much memory",
        PhotoFault.EndsDecoder => "making it ready fails each time",
        _ => "part of the picture is damaged",
    };

    /// <summary>Whether it may go better another time: the computer may have had much else to do.</summary>
    public static bool MayPass(this PhotoFault fault) => fault != PhotoFault.Damaged;
}
