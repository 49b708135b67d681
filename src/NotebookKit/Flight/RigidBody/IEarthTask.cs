namespace NotebookKit.Flight.RigidBody;

/// <summary>Work that is done on one Earth or another, with the Earth's equations known to the compiler.</summary>
internal interface IEarthTask
{
    /// <summary>Does it.</summary>
    void Run<TEarth>(TEarth earth)
        where TEarth : struct, IEarth;
}
