#pragma once

#include <QWidget>

#include "indexer/looks/pair_frames.h"
#include "ui/two_heads/laid_pairs.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class FactsForm;
class FrameChoice;
class Notice;
class Session;

// Beside a pair: how fairly it compares, what was done to its pictures, which photos could stand in
// it, and what its look is found by.
class PairDetails : public QWidget {
    Q_OBJECT
  public:
    explicit PairDetails(Session& session, QWidget* parent = nullptr);

    void show_pair(const Pair& pair);             // reads the records
    void show_laid(const LaidAndMeasured* laid);  // null while it is being laid

  signals:
    void like_asked();
    void points_asked();
    void progress_asked();
    void picture_asked();

  private:
    void add_acts(QVBoxLayout& column);
    void add_figures(QVBoxLayout& column);
    void add_frames(QVBoxLayout& column);
    void choose(std::optional<PhotoId> first, std::optional<PhotoId> second);
    void show_notes(const PairFrames& frames);

    Session& session_;
    Pair pair_;
    QPushButton* points_;
    QPushButton* pin_;
    QPushButton* refuse_;
    Notice* notice_;
    QLabel* figures_;
    QLabel* done_;
    FrameChoice* first_;
    FrameChoice* second_;
    FactsForm* facts_;
};

// What was done to lay the second picture upon the first, in words with the figures.
QString laying_in_words(const LaidPair& laid);

}  // namespace quarterturn
