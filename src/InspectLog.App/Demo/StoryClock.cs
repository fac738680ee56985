namespace InspectLog.App.Demo;

/// <summary>A clock that stands at the moment the story tells of.</summary>
internal sealed class StoryClock(TimeZoneInfo zone) : TimeProvider
{
    public DateTimeOffset Now { get; set; }

    public override TimeZoneInfo LocalTimeZone => zone;

    public override DateTimeOffset GetUtcNow() => Now.ToUniversalTime();
}
