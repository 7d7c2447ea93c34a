#pragma once

#include <QWidget>
#include <optional>

#include "indexer/record/id.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class FormButtons;
class Session;

// Beside the photos that were found: puts the chosen one into the bin, or takes it out again; says
// when how many go for good, and empties the bin after asking.
class BinPart : public QWidget {
    Q_OBJECT
  public:
    explicit BinPart(Session& session, QWidget* parent = nullptr);

    // Throws StoreError.
    void show_bin(bool in_bin, std::optional<PhotoId> chosen);
    // Puts the chosen photo in, or takes it out. Does nothing while none is chosen.
    void move_chosen();

  signals:
    void move_asked();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* build_question();
    void ask();
    void empty();

    Session& session_;
    bool in_bin_ = false;
    std::optional<PhotoId> chosen_;
    QLabel* leaving_;
    QPushButton* move_;
    QPushButton* empty_;
    QWidget* question_;
    QLabel* asked_;
    FormButtons* buttons_;
};

}  // namespace quarterturn
