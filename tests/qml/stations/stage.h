// SPDX-License-Identifier: MIT
#pragma once

#include "main/room.h"

#include <QObject>
#include <QTemporaryDir>

#include <memory>

/// The real models over a store in a folder of its own, and what the store holds, read apart from them.
class Stage : public QObject {
    Q_OBJECT

public:
    explicit Stage(QObject *parent = nullptr);
    ~Stage() override;

    /// Whether there is something to work on.
    [[nodiscard]] bool isSet() const { return m_room != nullptr; }
    /// Puts the piece of the worked example on the shelf anew, as a piece not begun, its blocks
    /// stitched and pressed for Trim, and opens it at a station. `trial`: its trial was put off if false.
    Q_INVOKABLE bool begin(int station, bool trial);
    /// Takes back all cuts whose name begins so: what hangs on them can be chosen again.
    Q_INVOKABLE bool leaveUncut(const QString &kind);
    /// As after the program was started again: it asks of the step at hand.
    Q_INVOKABLE void startAgain();
    /// Stitches every block of the piece.
    Q_INVOKABLE bool stitchBlocks();
    /// Forgets the hoop's sizes: nothing can be planned.
    Q_INVOKABLE bool forgetTheHoop();
    /// How many repetitions of steps the store holds as done at a station.
    Q_INVOKABLE int done(int station) const;
    /// The figure of the first step not done at a station as the saved plan has it: "13 1/4 in".
    Q_INVOKABLE QString figureDue(int station) const;
    /// The finished size along that the saved plan has.
    Q_INVOKABLE QString finishedAlong() const;
    /// How many columns of blocks the store holds.
    Q_INVOKABLE int columns() const;
    /// Lets another tablet work on the piece that lies open, and this one too, so that they differ in its
    /// seam and in strips cut; what the other sends lies in the documents as "Other tablet". False: it could
    /// not.
    Q_INVOKABLE bool workOnTwoTablets();
    /// The seam the store holds: "5/8 in".
    Q_INVOKABLE QString seam() const;
    /// What the acts draw that the program can tell, whatever the piece.
    Q_INVOKABLE QStringList vignettes() const;
    /// What the steps do, all of it: "press-block".
    Q_INVOKABLE QStringList stepsDone() const;

private:
    struct Saved;
    [[nodiscard]] Saved saved() const;

    QTemporaryDir m_folder;
    QTemporaryDir m_papers;
    std::unique_ptr<matside::Room> m_room;
};
