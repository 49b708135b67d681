namespace NotebookKit.Numerics.Disks;

/// <summary>What files are written with, a step a method, so that a test can let each step fail in its turn.</summary>
internal class Disk
{
    /// <summary>The machine's own.</summary>
    public static Disk Machine { get; } = new();

    /// <summary>Makes a folder with those above it; nothing where it is there.</summary>
    public virtual void MakeFolder(string path) => Directory.CreateDirectory(path);

    /// <summary>Begins a file, empty.</summary>
    public virtual Stream Begin(string path) => new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);

    /// <summary>Opens a file that is there, for bytes that go to the system at once.</summary>
    public virtual Stream Open(string path, FileAccess access, FileShare share) =>
        new FileStream(path, FileMode.Open, access, share, bufferSize: 0);

    /// <summary>Waits until what was written lies on the disk.</summary>
    public virtual void Flush(Stream stream) => ((FileStream)stream).Flush(flushToDisk: true);

    /// <summary>Gives a file another name.</summary>
    public virtual void Move(string from, string to, bool overwrite) => File.Move(from, to, overwrite);

    /// <summary>Gives a folder another name.</summary>
    public virtual void MoveFolder(string from, string to) => Directory.Move(from, to);

    /// <summary>Deletes a file; nothing where there is none.</summary>
    public virtual void Delete(string path) => File.Delete(path);

    /// <summary>Deletes a folder with what is in it.</summary>
    public virtual void DeleteFolder(string path) => Directory.Delete(path, recursive: true);

    /// <summary>Writes a file whole or not at all: beside its place first, then into it in one step.</summary>
    /// <param name="path">Its place.</param>
    /// <param name="beside">Where it is written first, on the same disk.</param>
    /// <param name="write">Writes it.</param>
    /// <param name="overwrite">Whether it may take the place of another.</param>
    public void Put(string path, string beside, Action<Stream> write, bool overwrite)
    {
        try
        {
            using (var stream = Begin(beside))
            {
                write(stream);
                Flush(stream);
            }

            Move(beside, path, overwrite);
        }
        catch
        {
            TryDelete(beside);
            throw;
        }
    }

    /// <summary>Deletes a file where that is possible.</summary>
    /// <returns>Whether it is gone, or never was there.</returns>
    public bool TryDelete(string path)
    {
        try
        {
            Delete(path);
            return true;
        }
        catch (DirectoryNotFoundException)
        {
            return true;
        }
        catch (Exception e) when (IsFault(e))
        {
            return !File.Exists(path);
        }
    }

    /// <summary>Deletes a folder where that is possible.</summary>
    /// <returns>Whether it is gone, or never was there.</returns>
    public bool TryDeleteFolder(string path)
    {
        try
        {
            if (Directory.Exists(path)) DeleteFolder(path);
            return true;
        }
        catch (Exception e) when (IsFault(e))
        {
            return !Directory.Exists(path);
        }
    }

    /// <summary>Whether it is the disk, the rights on it or the name of a file that an exception is of.</summary>
    public static bool IsFault(Exception error) =>
        error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;
}
