using NotebookKit.Numerics.Disks;

namespace NotebookKit.Runner.Tests.Running;

/// <summary>In which way a disk fails.</summary>
public enum Fault
{
    /// <summary>Fails at no place; counts them.</summary>
    None,

    /// <summary>Is full at one place, and has room again.</summary>
    FullOnce,

    /// <summary>Is full from one place on; what takes no room still works.</summary>
    StaysFull,

    /// <summary>Refuses one place for want of rights.</summary>
    RefusedOnce,

    /// <summary>Is gone from one place on.</summary>
    Gone,
}

/// <summary>The machine's disk, but at one place, counted from 1, it fails. A write that fails has written half.</summary>
internal sealed class FaultyDisk(Fault fault, int at) : Disk
{
    private int _places;

    /// <summary>How many places there were.</summary>
    public int Places => _places;

    /// <summary>Whether the place was reached.</summary>
    public bool HasFailed { get; private set; }

    public override void MakeFolder(string path) => Do(true, () => base.MakeFolder(path));

    public override Stream Begin(string path)
    {
        Step(true);
        return new FaultyStream(base.Begin(path), this);
    }

    // Reading is no place.
    public override Stream Open(string path, FileAccess access, FileShare share)
    {
        if (access == FileAccess.Read) return base.Open(path, access, share);
        Step(false);
        return new FaultyStream(base.Open(path, access, share), this);
    }

    public override void Flush(Stream stream) => Do(true, () => base.Flush(((FaultyStream)stream).Inner));

    public override void Move(string from, string to, bool overwrite) => Do(false, () => base.Move(from, to, overwrite));

    public override void MoveFolder(string from, string to) => Do(false, () => base.MoveFolder(from, to));

    public override void Delete(string path) => Do(false, () => base.Delete(path));

    public override void DeleteFolder(string path) => Do(false, () => base.DeleteFolder(path));

    private void Do(bool takesRoom, Action what)
    {
        Step(takesRoom);
        what();
    }

    private void Step(bool takesRoom)
    {
        if (FailsNow(takesRoom)) throw Error();
    }

    private Exception Error() => fault == Fault.RefusedOnce ? new UnauthorizedAccessException("Access to the path is denied.")
        : new IOException("No space left on device");

    private bool FailsNow(bool takesRoom)
    {
        _places++;
        if (_places < at || fault == Fault.None) return false;
        var fails = fault switch
        {
            Fault.Gone => true,
            Fault.StaysFull => takesRoom,
            Fault.FullOnce => takesRoom && !HasFailed,
            _ => _places == at,
        };
        HasFailed |= fails;
        return fails;
    }

    private sealed class FaultyStream(Stream inner, FaultyDisk disk) : Stream
    {
        private int _writes;

        public Stream Inner { get; } = inner;

        public override bool CanRead => Inner.CanRead;

        public override bool CanSeek => Inner.CanSeek;

        public override bool CanWrite => Inner.CanWrite;

        public override long Length => Inner.Length;

        public override long Position
        {
            get => Inner.Position;
            set => Inner.Position = value;
        }

        public override void Flush() => Inner.Flush();

        public override int Read(byte[] buffer, int offset, int count) => Inner.Read(buffer, offset, count);

        public override long Seek(long offset, SeekOrigin origin) => Inner.Seek(offset, origin);

        public override void SetLength(long value)
        {
            disk.Step(false);
            Inner.SetLength(value);
        }

        // The first and the second write of a file are places; a large file would have hundreds more that are no different.
        public override void Write(byte[] buffer, int offset, int count)
        {
            if (_writes++ < 2 && disk.FailsNow(true))
            {
                Inner.Write(buffer, offset, count / 2);
                Inner.Flush();
                throw disk.Error();
            }

            Inner.Write(buffer, offset, count);
        }

        protected override void Dispose(bool disposing)
        {
            if (disposing) Inner.Dispose();
            base.Dispose(disposing);
        }
    }
}
