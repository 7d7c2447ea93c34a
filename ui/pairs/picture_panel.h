#pragma once

#include <QWidget>

#include "indexer/portfolio/pair_export.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class Notice;
class Session;
class WaysOut;

// A pair as one picture: what it is for, what it looks like, and what stands against it.
class PicturePanel : public QWidget {
    Q_OBJECT
  public:
    explicit PicturePanel(Session& session, QWidget* parent = nullptr);

    void show_pair(const Pair& pair);  // reads the records
    void make(const Path& file);

  signals:
    void left();

  private:
    QWidget* build_choices();
    void add_checks(QVBoxLayout& column);
    QWidget* build_foot();
    void show_against();
    void ask_file();
    PairExportWishes wishes(const Path& file) const;
    void tell(const PairGone& gone);

    Session& session_;
    Pair pair_;
    QComboBox* use_;
    QLabel* against_;
    QComboBox* shape_;
    QComboBox* layout_;
    QLineEdit* caption_;
    QCheckBox* line_;
    QCheckBox* even_light_;
    QCheckBox* say_;
    QCheckBox* inside_;
    QCheckBox* no_mining_;
    QPushButton* make_;
    Notice* notice_;
    WaysOut* ways_;
};

}  // namespace quarterturn
