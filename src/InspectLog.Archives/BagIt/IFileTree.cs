namespace InspectLog.Archives.BagIt;

/// <summary>Files to be looked at as a bag: a folder, or what a ZIP holds. Nothing of it is ever written.</summary>
public interface IFileTree : IDisposable
{
    /// <summary>Every file, once, by its path below the bag's own folder, with slashes. Only paths that cannot lead out of it
    /// are among them.</summary>
    IReadOnlyDictionary<string, long> Lengths { get; }

    /// <summary>What cannot be taken as a file of a bag: links, paths that lead elsewhere, names that are there twice.</summary>
    IReadOnlyList<BagFault> Faults { get; }

    /// <summary>Opens a file from its beginning.</summary>
    /// <param name="path">One of <see cref="Lengths"/>.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="InvalidDataException">It is not what the container says of it.</exception>
    Stream Open(string path);
}

/// <summary>Something wrong with a bag.</summary>
/// <param name="Path">The file it is about; empty where it is about the bag as a whole.</param>
/// <param name="Words">What is wrong, in a clause that follows the path.</param>
public sealed record BagFault(string Path, string Words);
