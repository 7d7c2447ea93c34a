#pragma once

#include <QWidget>

#include "indexer/rules/coverage.h"

namespace quarterturn {

class FlowLayout;

// What the look still lacks, each as a sentence that leads there.
class MissingPart : public QWidget {
    Q_OBJECT
  public:
    explicit MissingPart(QWidget* parent = nullptr);

    // The gaps of `stage` come first; more than `most_told` are told as a number.
    void show_gaps(const CoverageReport& coverage, Stage stage, std::size_t most_told);

  signals:
    void asked_for(const quarterturn::Shot& shot);
    void sign_off_asked();

  private:
    void add_gap(const CoverageLine& line);

    FlowLayout* flow_;
    CoverageReport shown_;
    Stage stage_ = Stage::before;
    std::size_t most_told_ = 0;
};

}  // namespace quarterturn
