namespace InspectLog.App.Forms;

/// <summary>Reads bodies and files whole, never more than is allowed.</summary>
public static class Body
{
    /// <summary>The body of a request. The endpoint's size limit bounds it.</summary>
    public static async Task<byte[]> ReadAsync(HttpRequest request)
    {
        using var buffer = new MemoryStream();
        await request.Body.CopyToAsync(buffer, request.HttpContext.RequestAborted);
        return buffer.ToArray();
    }

    /// <summary>A file of a form. Of a file above the limit only one byte more than the limit is read, so that whoever
    /// examines it sees that it is too large.</summary>
    public static async Task<byte[]> ReadAsync(IFormFile file, int limit, CancellationToken cancellationToken)
    {
        await using var stream = file.OpenReadStream();
        var bytes = new byte[Math.Min(file.Length, limit + 1L)];
        await stream.ReadExactlyAsync(bytes, cancellationToken);
        return bytes;
    }
}
