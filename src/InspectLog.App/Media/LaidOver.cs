using InspectLog.Photos.Alignment;

namespace InspectLog.App.Media;

/// <summary>What trying to lay an earlier photo over a later one gave.</summary>
public abstract record LaidOver
{
    private LaidOver()
    {
    }

    /// <summary>They show the same view.</summary>
    /// <param name="Way">How the earlier one has to be laid.</param>
    public sealed record Fits(ViewTransform Way) : LaidOver;

    /// <summary>They do not show the same view closely enough.</summary>
    public sealed record OtherView : LaidOver;

    /// <summary>One of them cannot be shown, or cannot be looked at now.</summary>
    public sealed record NotSeen : LaidOver;
}
