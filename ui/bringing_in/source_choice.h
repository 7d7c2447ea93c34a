#pragma once

#include <QFrame>
#include <vector>

#include "indexer/disk/file_system.h"

class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class CardFinder;

// Where the photos are: a place to drop files and folders on, buttons to choose them, and a line
// for each card or phone that is connected.
class SourceChoice : public QFrame {
    Q_OBJECT
  public:
    explicit SourceChoice(CardFinder& finder, QWidget* parent = nullptr);

    // Where bringing in from these was not finished; nothing: no more.
    void offer_to_go_on(const std::vector<Path>& sources);

  signals:
    void chosen(const std::vector<Path>& sources);
    void left_alone();  // what was not finished

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void choose_folder();
    void choose_files();
    void show_cards(const std::vector<Path>& cards);

    std::vector<Path> offered_;
    QVBoxLayout* begun_;
    QPushButton* folder_;
    QVBoxLayout* cards_;
};

}  // namespace quarterturn
