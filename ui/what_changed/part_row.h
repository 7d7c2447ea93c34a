#pragma once

#include <QWidget>
#include <vector>

#include "indexer/rules/compared_parts.h"
#include "indexer/rules/word_changes.h"

class QGridLayout;

namespace quarterturn {

// One part or step of two recipes side by side. Words that left are struck through, words that came
// are underlined and bold: nothing hangs on colour.
class PartRow : public QWidget {
    Q_OBJECT
  public:
    // The drawings are shown for the head plan.
    PartRow(const ComparedPart& part, const HeadDrawing& was, const HeadDrawing& is,
            QWidget* parent = nullptr);

  private:
    void add_side(QGridLayout& grid, int column, const std::vector<std::vector<WordRun>>& lines,
                  const HeadDrawing* drawing);
};

// The lines as rich text with what changed marked; `gone` says which way.
QString marked_text(const std::vector<std::vector<WordRun>>& lines, bool gone);

}  // namespace quarterturn
