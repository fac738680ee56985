using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Media;

namespace InspectLog.App.Bench.Photos;

/// <summary>Takes in photos by pieces. A form names them in its field <c>piece</c> once they are whole.</summary>
public static class PhotoPieceEndpoint
{
    public static void MapPhotoPieces(this IEndpointRouteBuilder inspection) => inspection.MapPost("/photos/pieces/{sha256}", Take)
        .WithName("take-piece")
        .WithMetadata(new RequestSizeLimit(PhotoPieces.LargestPiece), new AnswersScripts());

    /// <summary>Tells how much is there, also to a piece that was not taken: the next one begins there.</summary>
    private static async Task<IResult> Take(HttpContext context, PhotoPieces pieces, string sha256, long at = 0)
    {
        if (!PhotoPieces.IsName(sha256))
        {
            return Results.NotFound();
        }

        return Results.Json(new PieceTaken(pieces.Add(sha256, at, await Body.ReadAsync(context.Request))));
    }

    /// <param name="Have">Bytes that are there, from the beginning.</param>
    private sealed record PieceTaken(long Have);
}
