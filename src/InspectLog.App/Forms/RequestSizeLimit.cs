using Microsoft.AspNetCore.Http.Metadata;

namespace InspectLog.App.Forms;

/// <summary>Largest body an endpoint takes, with room for the form around the files.</summary>
public sealed class RequestSizeLimit(long bytes) : IRequestSizeLimitMetadata
{
    private const long FormAround = 100_000;

    public long? MaxRequestBodySize { get; } = bytes + FormAround;
}
