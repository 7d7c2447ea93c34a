#pragma once

#include <QWidget>

#include "indexer/portfolio/export.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace quarterturn {

class Notice;
class Session;

// How the photos of a selection are to be written, the cautions, and what became of each.
class ExportPart : public QWidget {
    Q_OBJECT
  public:
    explicit ExportPart(Session& session, QWidget* parent = nullptr);

    void show_selection(Use use, const std::vector<PhotoId>& photos);
    void export_to(const Path& folder);

  private:
    QWidget* build_choices();
    QWidget* build_report();
    void show_usual_size(Use use);
    ExportWishes wishes(const Path& folder) const;
    void ask_where();
    void report(const std::vector<PhotoGone>& all);
    void report_one(const PhotoGone& gone);

    Session& session_;
    Use use_ = Use::website;
    std::vector<PhotoId> photos_;
    bool size_chosen_ = false;  // by her, so that another use leaves it alone
    QLabel* what_;
    QComboBox* sizes_;
    QComboBox* shapes_;
    QSpinBox* quality_;
    QLineEdit* caption_;
    QCheckBox* line_;
    QCheckBox* no_data_mining_;
    QPushButton* export_;
    Notice* notice_;
    QLabel* outcome_;
    QVBoxLayout* report_;
};

}  // namespace quarterturn
