namespace InspectLog.Photos.Developing;

/// <summary>Makes copies and figures of photos. Takes bounded time and memory for any bytes.</summary>
public interface IPhotoDeveloper
{
    /// <summary>Develops one photo.</summary>
    /// <param name="work">What is wanted.</param>
    /// <param name="original">A file that <see cref="PhotoIntake.Examine"/> accepted.</param>
    /// <param name="facts">What it said of the file.</param>
    /// <param name="cancellationToken">Given up.</param>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    Task<PhotoAnswer> DevelopAsync(
        PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts, CancellationToken cancellationToken);
}

/// <summary>What is wanted of a photo.</summary>
public enum PhotoWork
{
    /// <summary>Display copy, thumbnail and figures, of one decode.</summary>
    Copies = 1,

    /// <summary>The copy for paper.</summary>
    Print = 2,

    /// <summary>A small picture in shades of grey, by which views are laid over each other.</summary>
    Grey = 3,

    /// <summary>The small copy for paper, of which many stand in one file.</summary>
    SmallPrint = 4,
}
