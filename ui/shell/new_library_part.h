#pragma once

#include <QWidget>

#include "indexer/store/library.h"

class QLineEdit;
class QPushButton;

namespace quarterturn {

class Notice;
class Session;

// Starts a library in a folder that she names. What is wrong with it stands below.
class NewLibraryPart : public QWidget {
    Q_OBJECT
  public:
    // `start` is the button that does it, in the rank that it has on the page.
    NewLibraryPart(Session& session, QPushButton* start, QWidget* parent = nullptr);

    // Where qturn looks when no library is named; Quarterturn 2 and so on where that is taken.
    static Path proposed_folder();

  private:
    void choose_folder();
    void start_here();

    Session& session_;
    QLineEdit* folder_;
    Notice* notice_;
};

}  // namespace quarterturn
