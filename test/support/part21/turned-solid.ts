// A cylinder or a frustum as a STEP file, set by hand for the judge's own test: whole circles for edges, a ring for its curved face.

/** @param low radius at z = 0 @param high at z = height, mm */
export function turnedSolid(low: number, high: number, height: number): string {
  const real = (value: number) => (Number.isInteger(value) ? `${value}.` : String(value));
  const slope = Math.atan2(high - low, height);
  const surface =
    low === high ? `CYLINDRICAL_SURFACE('',#14,${real(low)})` : `CONICAL_SURFACE('',#14,${real(low)},${real(slope)})`;
  return `ISO-10303-21;
HEADER;
FILE_DESCRIPTION((''),'2;1');
FILE_NAME('','1980-01-01T00:00:00',(''),(''),'','','');
FILE_SCHEMA(('AUTOMOTIVE_DESIGN'));
ENDSEC;
DATA;
#1=(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.)); /* units */
#2=(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.));
#3=(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNIT_ASSIGNED_CONTEXT((#1,#2))REPRESENTATION_CONTEXT('',''));
#10=DIRECTION('',(0.,0.,2.));
#11=DIRECTION('',(1.,0.,0.));
#12=CARTESIAN_POINT('',(7.,8.,0.));
#13=CARTESIAN_POINT('',(7.,8.,${real(height)}));
#14=AXIS2_PLACEMENT_3D('',#12,#10,#11);
#15=AXIS2_PLACEMENT_3D('',#13,$,$);
#16=DIRECTION('',(0.,0.,-1.));
#17=AXIS2_PLACEMENT_3D('',#12,#16,#11);
#20=CARTESIAN_POINT('',(${real(7 + low)},8.,0.));
#21=CARTESIAN_POINT('',(${real(7 + high)},8.,${real(height)}));
#22=VERTEX_POINT('',#20);
#23=VERTEX_POINT('',#21);
#24=CIRCLE('',#14,${real(low)});
#25=CIRCLE('',#15,${real(high)});
#26=EDGE_CURVE('',#22,#22,#24,.T.);
#27=EDGE_CURVE('',#23,#23,#25,.T.);
#30=ORIENTED_EDGE('',*,*,#26,.T.);
#31=ORIENTED_EDGE('',*,*,#26,.F.);
#32=ORIENTED_EDGE('',*,*,#27,.T.);
#33=ORIENTED_EDGE('',*,*,#27,.F.);
#40=EDGE_LOOP('',(#30));
#41=EDGE_LOOP('',(#31));
#42=EDGE_LOOP('',(#32));
#43=EDGE_LOOP('',(#33));
#50=FACE_BOUND('',#40,.T.);
#51=FACE_OUTER_BOUND('',#41,.T.);
#52=FACE_OUTER_BOUND('',#42,.T.);
#53=FACE_BOUND('',#43,.T.);
#60=PLANE('',#17);
#61=PLANE('',#15);
#62=${surface};
#70=ADVANCED_FACE('',(#51),#60,.T.);
#71=ADVANCED_FACE('',(#52),#61,.T.);
#72=ADVANCED_FACE('',(#50,#53),#62,.T.);
#80=CLOSED_SHELL('',(#70,#71,#72));
#81=MANIFOLD_SOLID_BREP('turned',#80);
#82=ADVANCED_BREP_SHAPE_REPRESENTATION('turned',(#14,#81),#3);
#90=PRODUCT('turned','turned','',());
#91=PRODUCT_DEFINITION_FORMATION('','',#90);
#92=PRODUCT_DEFINITION('design','',#91,$);
#93=PRODUCT_DEFINITION_SHAPE('','',#92);
#94=SHAPE_DEFINITION_REPRESENTATION(#93,#82);
ENDSEC;
END-ISO-10303-21;
`;
}
