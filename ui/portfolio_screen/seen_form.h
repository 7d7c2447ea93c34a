#pragma once

#include <QWidget>

#include "indexer/record/credit.h"
#include "indexer/rules/gate.h"

class QCheckBox;
class QComboBox;
class QLabel;

namespace quarterturn {

class ClientsSeen;
class Session;

// Who is seen in a photo, and whether a face shows. Each choice counts at once.
class SeenForm : public QWidget {
    Q_OBJECT
  public:
    explicit SeenForm(Session& session, QWidget* parent = nullptr);

    void show_photo(const Photo& photo, const PhotoToShow& shown);

  private:
    void save();

    Session& session_;
    PhotoId photo_;
    ClientsSeen* clients_;
    QComboBox* face_;
    QCheckBox* strangers_;
    QCheckBox* nobody_;
    QLabel* doubts_;
};

}  // namespace quarterturn
